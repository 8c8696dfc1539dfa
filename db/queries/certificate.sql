-- Certificates and the files that were made of them.

-- name: add
INSERT INTO certificate (number, service_order, decision, at_utc, at_offset, content, digest,
                         claims)
VALUES (:number, (SELECT id FROM service_order WHERE order_number = :order_number),
        (SELECT id FROM decision WHERE decision = :decision), :at_utc, :at_offset, :content,
        :digest, :claims)

-- name: find
SELECT t.number, o.order_number, d.decision, t.at_utc, t.at_offset, t.content, t.digest, t.claims
FROM certificate AS t JOIN service_order AS o ON o.id = t.service_order
JOIN decision AS d ON d.id = t.decision
WHERE t.number = :number

-- name: of_order
SELECT t.number, o.order_number, d.decision, t.at_utc, t.at_offset, t.content, t.digest, t.claims
FROM certificate AS t JOIN service_order AS o ON o.id = t.service_order
JOIN decision AS d ON d.id = t.decision
WHERE o.order_number = :order_number ORDER BY t.id

-- name: orders_of_office
SELECT DISTINCT o.order_number
FROM office AS f JOIN service_order AS o ON o.office = f.id
JOIN certificate AS t ON t.service_order = o.id WHERE f.office = :office

-- name: newest_like
SELECT number FROM certificate WHERE number >= :begin AND number < :begin || ':'
ORDER BY number DESC LIMIT 1

-- name: issues
SELECT i.issue, i.file_sha256, i.paper, i.copy, i.at_utc, i.at_offset
FROM certificate_issue AS i JOIN certificate AS t ON t.id = i.certificate
WHERE t.number = :number ORDER BY i.issue

-- name: add_issue
INSERT INTO certificate_issue (certificate, issue, file_sha256, paper, copy, at_utc, at_offset)
VALUES ((SELECT id FROM certificate WHERE number = :number), :issue, :file_sha256, :paper,
        :issue > 1, :at_utc, :at_offset)

-- name: by_file
SELECT t.number FROM certificate_issue AS i JOIN certificate AS t ON t.id = i.certificate
WHERE i.file_sha256 = :file_sha256

-- name: set_due
INSERT INTO paper_due (certificate_issue)
SELECT i.id FROM certificate_issue AS i JOIN certificate AS t ON t.id = i.certificate
WHERE t.number = :number AND i.issue = :issue

-- name: due
SELECT i.issue, i.file_sha256, i.paper, i.copy, i.at_utc, i.at_offset
FROM paper_due AS p JOIN certificate_issue AS i ON i.id = p.certificate_issue
JOIN certificate AS t ON t.id = i.certificate
WHERE t.number = :number ORDER BY i.issue DESC LIMIT 1

-- name: clear_due
DELETE FROM paper_due WHERE certificate_issue IN (
    SELECT i.id FROM certificate_issue AS i JOIN certificate AS t ON t.id = i.certificate
    WHERE t.number = :number)
