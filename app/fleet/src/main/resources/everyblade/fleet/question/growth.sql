WITH inspection AS (
  SELECT d.id, c.site, c.model, c.serial, c.begun, c.first,
         row_number() OVER (PARTITION BY c.model, c.serial ORDER BY c.begun DESC, c.first) AS back
  FROM everyblade.chain c JOIN everyblade.derived d ON d.chain = c.first AND d.head = c.head
), pair AS (
  SELECT DISTINCT ON (now.id, f.entry)
         now.site, now.model, now.serial, f.row_id, f.airfoil, f.kind, f.zones AS mask, r.zones, before.begun AS before,
         now.begun AS now, now.first, f.length AS length_now, g.length AS length_before, f.depth AS depth_now,
         g.depth AS depth_before, f.width AS width_now, g.width AS width_before
  FROM inspection now
  JOIN inspection before ON before.model = now.model AND before.serial = now.serial AND before.back = 2
  JOIN everyblade.finding f ON f.derived = now.id
  JOIN everyblade.finding g ON g.derived = before.id AND g.row_id = f.row_id AND g.airfoil = f.airfoil
    AND g.kind = f.kind AND g.zones & f.zones <> 0
  JOIN everyblade.blade_row r ON r.derived = now.id AND r.row_id = f.row_id
  WHERE now.back = 1
  ORDER BY now.id, f.entry, bit_count((g.zones & f.zones)::bit(64)) DESC,
           abs(coalesce(f.length - g.length, 0)) + abs(coalesce(f.depth - g.depth, 0)) + abs(coalesce(f.width - g.width, 0))
)
SELECT site, model, serial, row_id AS "row", airfoil, kind,
       (SELECT string_agg(name, ' ' ORDER BY i) FROM unnest(zones) WITH ORDINALITY AS z (name, i)
        WHERE mask >> (i - 1)::int & 1 = 1) AS zones,
       length_before, length_now, depth_before, depth_now, width_before, width_now, before, now, left(first, 12) AS job
FROM pair
ORDER BY greatest(length_now - length_before, depth_now - depth_before, width_now - width_before) DESC NULLS LAST,
         site, model, serial, row_id, airfoil, kind
