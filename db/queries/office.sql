-- Serving offices, and apart from them the unpublished numbers of their test lines.

-- name: find
SELECT office, name, protocol_variant FROM office WHERE office = :office

-- name: all
SELECT office, name, protocol_variant FROM office ORDER BY office

-- name: put
INSERT INTO office (office, name, protocol_variant, digest)
VALUES (:office, :name, :protocol_variant, :digest)
ON CONFLICT (office) DO UPDATE SET name = excluded.name,
    protocol_variant = excluded.protocol_variant, digest = excluded.digest

-- name: test_lines
SELECT t.label, t.number FROM office_test_line AS t JOIN office AS o ON o.id = t.office
WHERE o.office = :office ORDER BY t.label

-- name: remove_test_lines
DELETE FROM office_test_line WHERE office = (SELECT id FROM office WHERE office = :office)

-- name: add_test_line
INSERT INTO office_test_line (office, label, number)
VALUES ((SELECT id FROM office WHERE office = :office), :label, :number)
