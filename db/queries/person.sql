-- Installers, dispatchers, supervisors.

-- name: find
SELECT installer, name, role, login FROM installer WHERE installer = :installer

-- name: all
SELECT installer, name, role, login FROM installer ORDER BY installer

-- name: pin
SELECT pin FROM installer WHERE installer = :installer

-- name: put
INSERT INTO installer (installer, name, role, login, pin, digest)
VALUES (:installer, :name, :role, :login, :pin, :digest)
ON CONFLICT (installer) DO UPDATE SET name = excluded.name, role = excluded.role,
    login = excluded.login, pin = excluded.pin, digest = excluded.digest
