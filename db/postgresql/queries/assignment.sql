-- name: doubles
WITH doubled AS (
    SELECT kind, scope, value, array_agg(service_order) AS orders FROM wanted_value
    GROUP BY kind, scope, value HAVING min(circuit) <> max(circuit)
)
SELECT DISTINCT d.kind, d.scope, d.value, c.circuit_number, o.order_number
FROM doubled AS d JOIN service_order AS o ON o.id = ANY (d.orders)
JOIN circuit AS c ON c.id = o.circuit
ORDER BY d.kind, d.scope, d.value, c.circuit_number, o.order_number
