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

-- The last one is the one that is in force: the one that was issued last, wherever, unless somebody
-- settled that of two stations' certificates that of the other stands. A station's tag stands in the
-- number; the office's is none of those that are known here.
-- name: of_order
SELECT t.number, o.order_number, d.decision, t.at_utc, t.at_offset, t.content, t.digest, t.claims
FROM certificate AS t JOIN service_order AS o ON o.id = t.service_order
JOIN decision AS d ON d.id = t.decision
LEFT JOIN conflict AS c ON c.service_order = o.id AND c.code = 'certificate_superseded'
    AND c.stands = 1
LEFT JOIN settlement AS s
    ON s.id = (SELECT max(n.id) FROM settlement AS n WHERE n.conflict = c.conflict)
WHERE o.order_number = :order_number
GROUP BY t.id, o.order_number, d.decision
ORDER BY max(CASE WHEN s.side = 'office'
                 AND NOT EXISTS (SELECT 1 FROM station AS v WHERE instr(t.number, v.tag) > 0) THEN 1
             WHEN s.side <> 'office' AND instr(t.number, s.side) > 0 THEN 1 ELSE 0 END),
    -- Of one station as it gave them out, though its clock was set back; of two by their clocks.
    max(t.at_utc) OVER (PARTITION BY substr(t.number, 4, 6) ORDER BY t.id),
    substr(t.number, 4, 6), t.id

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
        CASE WHEN :issue > 1 THEN 1 ELSE 0 END, :at_utc, :at_offset)

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
