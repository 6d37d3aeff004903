WITH inspection AS (
  SELECT d.id, c.site, c.model, c.serial, c.begun, c.first, c.entries,
         row_number() OVER (PARTITION BY c.model, c.serial ORDER BY c.begun DESC, c.first) AS back
  FROM everyblade.chain c JOIN everyblade.derived d ON d.chain = c.first AND d.head = c.head
)
SELECT i.site, i.model, i.serial, a.row_id AS "row", r.basis,
       sum(bit_count(a.seen::bit(64))) AS seen, sum(bit_count(a.part::bit(64))) AS part,
       sum(bit_count(a.maybe::bit(64))) AS maybe, sum(bit_count(a.unseen::bit(64))) AS unseen,
       sum(bit_count(a.no_view::bit(64))) AS "no view",
       (SELECT count(*) FROM everyblade.finding f WHERE f.derived = i.id AND f.row_id = a.row_id) AS findings,
       i.begun, now()::date - i.begun::date AS days, left(i.first, 12) AS job
FROM inspection i
JOIN everyblade.airfoil a ON a.derived = i.id
JOIN everyblade.blade_row r ON r.derived = i.id AND r.row_id = a.row_id
WHERE i.back = 1
GROUP BY i.site, i.model, i.serial, a.row_id, r.basis, i.begun, i.first, i.id
ORDER BY i.site, i.model, i.serial, a.row_id
