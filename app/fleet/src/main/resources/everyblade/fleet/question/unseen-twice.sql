-- The head is compared in such a way that the planner takes it for no condition of the join, which would make it expect
-- a single job where there are thousands.
WITH inspection AS MATERIALIZED (
  SELECT d.id, c.site, c.model, c.serial, c.begun, c.first,
         lag(d.id) OVER engine AS before_id, lag(c.begun) OVER engine AS before,
         lead(d.id) OVER engine IS NULL AS last
  FROM everyblade.chain c JOIN everyblade.derived d ON d.chain = c.first
  WHERE CASE WHEN d.head = c.head THEN true ELSE false END
  WINDOW engine AS (PARTITION BY c.model, c.serial ORDER BY c.begun, c.first)
), twice AS (
  SELECT i.site, i.model, i.serial, a.row_id, a.n, r.zones, i.before, i.begun AS now, i.first,
         (a.unseen | a.maybe) & (b.unseen | b.maybe) & ~a.no_view AS mask
  FROM inspection i
  JOIN everyblade.airfoil a ON a.derived = i.id
  JOIN everyblade.airfoil b ON b.derived = i.before_id AND b.row_id = a.row_id AND b.n = a.n
  JOIN everyblade.blade_row r ON r.derived = i.id AND r.row_id = a.row_id
  JOIN everyblade.blade_row s ON s.derived = i.before_id AND s.row_id = a.row_id AND s.zones = r.zones
  WHERE i.last AND a.unseen | a.maybe <> 0 AND b.unseen | b.maybe <> 0
    AND (a.unseen | a.maybe) & (b.unseen | b.maybe) & ~a.no_view <> 0
)
SELECT site, model, serial, row_id AS "row", n AS airfoil,
       CASE WHEN bit_count(mask::bit(64)) = cardinality(zones) THEN 'all' ELSE (
         SELECT string_agg(name, ' ' ORDER BY i) FROM unnest(zones) WITH ORDINALITY AS z (name, i)
         WHERE mask >> (i - 1)::int & 1 = 1) END AS zones,
       before, now, left(first, 12) AS job
FROM twice
ORDER BY site, model, serial, row_id, n
