-- Reports. Each part gives a line for each order behind the figures of a report: the key that it is
-- counted under (per), what else tells the figures apart (detail), a number, whether it hits what the
-- report asks for, and its day. One of the first two statements makes figures or a list of them.

-- name: figures
SELECT per, detail, count(*) AS orders, count(CASE WHEN hit THEN 1 END) AS hits,
       count(CASE WHEN value = 0 THEN 1 END) AS none,
       avg(value) AS mean, max(value) AS most
-- name: orders
SELECT per, detail, value, hit, day, order_number, circuit_number, customer, office, installer

-- Out of its index alone, unless the orders are asked for.
-- part: first_visit
FROM (SELECT CASE :per WHEN 'office' THEN s.office WHEN 'installer' THEN s.installer
                  WHEN 'cable' THEN s.cable WHEN 'variant' THEN s.variant
                  ELSE substr(s.accepted_on, 1, 7) END AS per,
             '' AS detail, s.visits AS value, s.visits = 1 AS hit, s.accepted_on AS day,
             s.order_number, s.circuit_number, s.customer, s.office, s.installer
      FROM order_state AS s INDEXED BY order_state_accepted
      WHERE s.accepted_on <> '' AND s.order_type <> 'repair'
        AND s.accepted_on >= :from AND s.accepted_on <= :to) AS line
-- part: failing
FROM (SELECT CASE :per WHEN 'office' THEN s.office WHEN 'installer' THEN s.installer
                  WHEN 'cable' THEN s.cable WHEN 'variant' THEN s.variant
                  ELSE substr(s.due_date, 1, 7) END AS per,
             s.criterion AS detail, s.visits AS value, s.outcome = 'not_accepted' AS hit,
             s.due_date AS day,
             s.order_number, s.circuit_number, s.customer, s.office, s.installer
      FROM order_state AS s INDEXED BY order_state_open
      WHERE s.status = 'open' AND s.criterion <> '' AND s.due_date >= :from AND s.due_date <= :to) AS line
-- part: open_age
FROM (SELECT CASE :per WHEN 'office' THEN s.office WHEN 'installer' THEN s.installer
                  WHEN 'cable' THEN s.cable WHEN 'variant' THEN s.variant
                  ELSE substr(s.taken_on, 1, 7) END AS per,
             '' AS detail,
             CAST(julianday(:today) - julianday(s.taken_on) AS INTEGER) AS value,
             s.due_date < :today AND s.outcome <> 'accepted'
                 AND s.outcome <> 'accepted_with_exception' AS hit,
             s.taken_on AS day,
             s.order_number, s.circuit_number, s.customer, s.office, s.installer
      FROM order_state AS s INDEXED BY order_state_open
      WHERE s.status = 'open' AND s.taken_on >= :from AND s.taken_on <= :to) AS line
-- The detail is the exception itself.
-- part: exceptions
FROM (SELECT CASE :per WHEN 'office' THEN s.office WHEN 'installer' THEN s.installer
                  WHEN 'cable' THEN s.cable WHEN 'variant' THEN s.variant
                  ELSE substr(s.accepted_on, 1, 7) END AS per,
             CAST(f.content AS TEXT) AS detail, s.visits AS value, true AS hit, s.accepted_on AS day,
             s.order_number, s.circuit_number, s.customer, s.office, s.installer
      FROM order_state AS s INDEXED BY order_state_outcome
      CROSS JOIN fact AS f ON f.service_order = s.service_order
      WHERE s.outcome = 'accepted_with_exception' AND s.accepted_on <> ''
        AND s.accepted_on >= :from AND s.accepted_on <= :to AND f.kind = 'exception'
        AND NOT EXISTS (SELECT 1 FROM fact AS v WHERE v.voids = f.uuid AND v.service_order = f.service_order)) AS line
-- The last trouble of the circuit that was closed when this one was opened, as the chain of the
-- circuit tells, makes it a repeat.
-- part: troubles
FROM (SELECT CASE :per WHEN 'office' THEN s.office WHEN 'installer' THEN s.installer
                  WHEN 'cable' THEN s.cable WHEN 'variant' THEN s.variant
                  ELSE substr(s.taken_on, 1, 7) END AS per,
             '' AS detail, s.visits AS value,
             coalesce((SELECT c.at_utc >= strftime('%Y-%m-%dT%H:%M:%fZ', t.at_utc, :repeat_from)
                       FROM event AS t
                       JOIN event AS c ON c.subject = t.subject AND c.sequence < t.sequence
                       JOIN service_order AS p ON p.order_number = c.order_number
                       WHERE t.order_number = s.order_number AND t.order_number <> ''
                         AND t.kind = 'order_taken' AND c.kind = 'order_completed'
                         AND p.order_type = 'repair'
                       ORDER BY c.sequence DESC LIMIT 1), false) AS hit,
             s.taken_on AS day,
             s.order_number, s.circuit_number, s.customer, s.office, s.installer
      FROM service_order AS o INDEXED BY service_order_repair
      CROSS JOIN order_state AS s ON s.service_order = o.id
      WHERE o.order_type = 'repair' AND s.taken_on >= :from AND s.taken_on <= :to) AS line
-- The open orders whose evidence names the instrument.
-- part: calibration
FROM (SELECT CASE :per WHEN 'month' THEN substr(c.due, 1, 7) ELSE '' END AS per,
             c.instrument AS detail, 0 AS value, c.due < :today AS hit, c.due AS day,
             s.order_number, s.circuit_number, s.customer, s.office, s.installer
      FROM calibration_in_force AS c
      CROSS JOIN (SELECT DISTINCT instrument, service_order FROM fact WHERE instrument <> '') AS f
          ON f.instrument = c.instrument
      CROSS JOIN order_state AS s ON s.service_order = f.service_order
      WHERE s.status = 'open' AND c.due >= :from AND c.due <= :to) AS line

-- part: by_key
GROUP BY per, detail ORDER BY per, orders DESC, detail
-- part: behind
WHERE (per = :key OR :key IS NULL) AND (detail = :detail OR :detail IS NULL)
ORDER BY per, detail, day, order_number LIMIT :limit

-- Not grouped: an instrument that no order names is due all the same.
-- name: instruments
SELECT CASE :per WHEN 'month' THEN substr(c.due, 1, 7) ELSE '' END AS per, c.instrument, c.serial,
       c.kind, c.calibrated_on, c.due, c.due < :today AS overdue,
       (SELECT count(*) FROM (SELECT DISTINCT f.service_order FROM fact AS f
                              WHERE f.instrument = c.instrument AND f.instrument <> '') AS n
        JOIN service_order AS o ON o.id = n.service_order WHERE o.status = 'open') AS orders
FROM calibration_in_force AS c WHERE c.due >= :from AND c.due <= :to ORDER BY c.due, c.instrument
