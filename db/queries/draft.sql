-- What is being typed.

-- name: put
INSERT INTO draft (order_number, part, content) VALUES (:order_number, :part, :content)
ON CONFLICT (order_number, part) DO UPDATE SET content = excluded.content

-- name: find
SELECT content FROM draft WHERE order_number = :order_number AND part = :part

-- name: of_order
SELECT part, content FROM draft WHERE order_number = :order_number ORDER BY part

-- name: of_part
SELECT order_number, content FROM draft WHERE part = :part ORDER BY order_number

-- name: remove
DELETE FROM draft WHERE order_number = :order_number AND part = :part
