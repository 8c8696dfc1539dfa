-- Serving offices, and apart from them the unpublished numbers of their test lines.

-- name: find
SELECT office, name, protocol_variant, address, telephone, trouble_telephone
FROM office WHERE office = :office

-- name: all
SELECT office, name, protocol_variant, address, telephone, trouble_telephone
FROM office ORDER BY office

-- name: put
INSERT INTO office (office, name, protocol_variant, address, telephone, trouble_telephone, digest)
VALUES (:office, :name, :protocol_variant, :address, :telephone, :trouble_telephone, :digest)
ON CONFLICT (office) DO UPDATE SET name = excluded.name,
    protocol_variant = excluded.protocol_variant, address = excluded.address,
    telephone = excluded.telephone, trouble_telephone = excluded.trouble_telephone,
    digest = excluded.digest

-- name: issuer
SELECT name, address, telephone, trouble_telephone, trouble_hours FROM issuer

-- name: put_issuer
INSERT INTO issuer (id, name, address, telephone, trouble_telephone, trouble_hours, digest)
VALUES (1, :name, :address, :telephone, :trouble_telephone, :trouble_hours, :digest)
ON CONFLICT (id) DO UPDATE SET name = excluded.name, address = excluded.address,
    telephone = excluded.telephone, trouble_telephone = excluded.trouble_telephone,
    trouble_hours = excluded.trouble_hours, digest = excluded.digest

-- name: test_lines
SELECT t.label, t.number FROM office_test_line AS t JOIN office AS o ON o.id = t.office
WHERE o.office = :office ORDER BY t.label

-- name: remove_test_lines
DELETE FROM office_test_line WHERE office = (SELECT id FROM office WHERE office = :office)

-- name: add_test_line
INSERT INTO office_test_line (office, label, number)
VALUES ((SELECT id FROM office WHERE office = :office), :label, :number)
