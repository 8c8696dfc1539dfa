-- Decisions with their whole input and result.

-- name: add
INSERT INTO decision (decision, service_order, outcome, limit_set, at_utc, at_offset, input,
                      input_digest, result, digest)
VALUES (:decision, (SELECT id FROM service_order WHERE order_number = :order_number), :outcome,
        :limit_set, :at_utc, :at_offset, :input, :input_digest, :result, :digest)

-- name: find
SELECT d.decision, o.order_number, d.at_utc, d.at_offset, d.input, d.input_digest, d.result, d.digest
FROM decision AS d JOIN service_order AS o ON o.id = d.service_order
WHERE d.decision = :decision

-- name: of_order
SELECT d.decision, o.order_number, d.at_utc, d.at_offset, d.input, d.input_digest, d.result, d.digest
FROM decision AS d JOIN service_order AS o ON o.id = d.service_order
WHERE o.order_number = :order_number ORDER BY d.id

-- name: newest_limit_set
SELECT d.limit_set
FROM decision AS d JOIN service_order AS o ON o.id = d.service_order
WHERE o.order_number = :order_number ORDER BY d.id DESC LIMIT 1

-- name: newest
SELECT d.decision, o.order_number, d.at_utc, d.at_offset, d.input, d.input_digest, d.result, d.digest
FROM decision AS d JOIN service_order AS o ON o.id = d.service_order
WHERE o.order_number = :order_number ORDER BY d.id DESC LIMIT 1
