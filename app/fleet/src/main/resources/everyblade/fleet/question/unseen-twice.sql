WITH inspection AS (
  SELECT d.id, c.site, c.model, c.serial, c.begun, c.first,
         row_number() OVER (PARTITION BY c.model, c.serial ORDER BY c.begun DESC, c.first) AS back
  FROM everyblade.chain c JOIN everyblade.derived d ON d.chain = c.first AND d.head = c.head
), twice AS (
  SELECT now.site, now.model, now.serial, a.row_id, a.n, r.zones, before.begun AS before, now.begun AS now, now.first,
         (a.unseen | a.maybe) & (b.unseen | b.maybe) & ~a.no_view AS mask
  FROM inspection now
  JOIN inspection before ON before.model = now.model AND before.serial = now.serial AND before.back = 2
  JOIN everyblade.airfoil a ON a.derived = now.id
  JOIN everyblade.airfoil b ON b.derived = before.id AND b.row_id = a.row_id AND b.n = a.n
  JOIN everyblade.blade_row r ON r.derived = now.id AND r.row_id = a.row_id
  JOIN everyblade.blade_row s ON s.derived = before.id AND s.row_id = a.row_id AND s.zones = r.zones
  WHERE now.back = 1 AND (a.unseen | a.maybe) & (b.unseen | b.maybe) & ~a.no_view <> 0
)
SELECT site, model, serial, row_id AS "row", n AS airfoil,
       CASE WHEN bit_count(mask::bit(64)) = cardinality(zones) THEN 'all' ELSE (
         SELECT string_agg(name, ' ' ORDER BY i) FROM unnest(zones) WITH ORDINALITY AS z (name, i)
         WHERE mask >> (i - 1)::int & 1 = 1) END AS zones,
       before, now, left(first, 12) AS job
FROM twice
ORDER BY site, model, serial, row_id, n
