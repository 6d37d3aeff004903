-- The head is compared in such a way that the planner takes it for no condition of the join, which would make it expect
-- a single job where there are thousands.
WITH inspection AS MATERIALIZED (
  SELECT d.id, c.site, c.model, c.serial, c.begun, c.first,
         lag(d.id) OVER engine AS before_id, lag(c.begun) OVER engine AS before,
         lead(d.id) OVER engine IS NULL AS last
  FROM everyblade.chain c JOIN everyblade.derived d ON d.chain = c.first
  WHERE CASE WHEN d.head = c.head THEN true ELSE false END
  WINDOW engine AS (PARTITION BY c.model, c.serial ORDER BY c.begun, c.first)
), pair AS (
  SELECT DISTINCT ON (i.id, f.entry)
         i.id, i.site, i.model, i.serial, f.row_id, f.airfoil, f.kind, f.zones AS mask, i.before, i.begun AS now, i.first,
         f.length AS length_now, g.length AS length_before, f.depth AS depth_now, g.depth AS depth_before,
         f.width AS width_now, g.width AS width_before
  FROM inspection i
  JOIN everyblade.finding f ON f.derived = i.id
  JOIN everyblade.finding g ON g.derived = i.before_id AND g.row_id = f.row_id AND g.airfoil = f.airfoil
    AND g.kind = f.kind AND g.zones & f.zones <> 0
  WHERE i.last
  ORDER BY i.id, f.entry, bit_count((g.zones & f.zones)::bit(64)) DESC,
           abs(coalesce(f.length - g.length, 0)) + abs(coalesce(f.depth - g.depth, 0)) + abs(coalesce(f.width - g.width, 0))
), grown AS (
  -- What zones are called is looked up of those that grew alone: reading all rows of all engines took longer than the rest.
  SELECT pair.*, (SELECT r.zones FROM everyblade.blade_row r WHERE r.derived = pair.id AND r.row_id = pair.row_id) AS zones
  FROM pair WHERE length_now > length_before OR depth_now > depth_before OR width_now > width_before
), named AS (
  SELECT zones, mask, (SELECT string_agg(name, ' ' ORDER BY i) FROM unnest(zones) WITH ORDINALITY AS z (name, i)
                       WHERE mask >> (i - 1)::int & 1 = 1) AS names
  FROM (SELECT DISTINCT zones, mask FROM grown) AS each
)
SELECT site, model, serial, row_id AS "row", airfoil, kind, names AS zones,
       length_before, length_now, depth_before, depth_now, width_before, width_now, before, now, left(first, 12) AS job
FROM grown JOIN named USING (zones, mask)
ORDER BY greatest(length_now - length_before, depth_now - depth_before, width_now - width_before) DESC NULLS LAST,
         site, model, serial, row_id, airfoil, kind
