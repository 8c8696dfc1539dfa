-- Installers, dispatchers, supervisors.

-- name: find
SELECT installer, name, role FROM installer WHERE installer = :installer

-- name: all
SELECT installer, name, role FROM installer ORDER BY installer

-- name: put
INSERT INTO installer (installer, name, role, digest) VALUES (:installer, :name, :role, :digest)
ON CONFLICT (installer) DO UPDATE SET name = excluded.name, role = excluded.role,
    digest = excluded.digest
