-- The words of a search are bound one by one, those that are not there as '%': so each goes by the index of pieces of three
-- letters.

-- The server keeps its indexes whole.
-- name: check_search
SELECT 1 AS there WHERE false

-- name: found
SELECT count(*) AS orders FROM (SELECT 1 FROM order_state
    WHERE (search LIKE :word1 OR search LIKE :bare1) AND (search LIKE :word2 OR search LIKE :bare2)
        AND (search LIKE :word3 OR search LIKE :bare3) AND (search LIKE :word4 OR search LIKE :bare4)
        AND (search LIKE :word5 OR search LIKE :bare5) AND (search LIKE :word6 OR search LIKE :bare6)
        AND (search LIKE :word7 OR search LIKE :bare7) AND (search LIKE :word8 OR search LIKE :bare8)
    LIMIT :most_found) AS f

-- part: from_search
FROM (SELECT service_order AS id FROM order_state
      WHERE (search LIKE :word1 OR search LIKE :bare1) AND (search LIKE :word2 OR search LIKE :bare2)
        AND (search LIKE :word3 OR search LIKE :bare3) AND (search LIKE :word4 OR search LIKE :bare4)
        AND (search LIKE :word5 OR search LIKE :bare5) AND (search LIKE :word6 OR search LIKE :bare6)
        AND (search LIKE :word7 OR search LIKE :bare7) AND (search LIKE :word8 OR search LIKE :bare8)
      ORDER BY service_order DESC LIMIT :most_found) AS f
JOIN order_state AS s ON s.service_order = f.id
-- part: from_search_or_named
FROM (SELECT id, max(named) AS named FROM (
          SELECT id, 0 AS named FROM (SELECT service_order AS id FROM order_state
              WHERE (search LIKE :word1 OR search LIKE :bare1) AND (search LIKE :word2 OR search LIKE :bare2)
                AND (search LIKE :word3 OR search LIKE :bare3) AND (search LIKE :word4 OR search LIKE :bare4)
                AND (search LIKE :word5 OR search LIKE :bare5) AND (search LIKE :word6 OR search LIKE :bare6)
                AND (search LIKE :word7 OR search LIKE :bare7) AND (search LIKE :word8 OR search LIKE :bare8)
              ORDER BY service_order DESC LIMIT :most_found) AS t
          UNION ALL
          SELECT p.service_order, 1 FROM json_array_elements(CAST(:named AS json)) AS w (value)
          JOIN LATERAL (SELECT x.service_order, x.search FROM order_state AS x
                        WHERE x.installer = w.value ->> 'key'
                        ORDER BY x.due_date DESC LIMIT :most_each) AS p ON true
          WHERE NOT EXISTS (SELECT 1 FROM json_array_elements(w.value -> 'rest') AS r (value)
                            WHERE instr(p.search, r.value ->> 'word') = 0
                              AND instr(p.search, r.value ->> 'bare') = 0)) AS a
      GROUP BY id) AS f
JOIN order_state AS s ON s.service_order = f.id
-- part: short_words
AND NOT EXISTS (SELECT 1 FROM json_array_elements_text(CAST(:short_words AS json)) AS w (value)
                WHERE instr(s.search, w.value) = 0)
-- part: short_words_or_named
AND (f.named = 1
     OR NOT EXISTS (SELECT 1 FROM json_array_elements_text(CAST(:short_words AS json)) AS w (value)
                    WHERE instr(s.search, w.value) = 0))
