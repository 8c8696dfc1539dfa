-- Circuits.

-- name: add
INSERT INTO circuit (uuid, circuit_number) VALUES (:uuid, :circuit_number)
ON CONFLICT (circuit_number) DO NOTHING

-- name: of_order
SELECT c.circuit_number FROM circuit AS c JOIN service_order AS o ON o.circuit = c.id
WHERE o.order_number = :order_number

-- name: uuid_of_order
SELECT c.uuid FROM circuit AS c JOIN service_order AS o ON o.circuit = c.id
WHERE o.order_number = :order_number
