WITH job AS (
  SELECT d.id, c.model, c.serial, count(*) OVER (PARTITION BY c.model) AS jobs
  FROM everyblade.chain c JOIN everyblade.derived d ON d.chain = c.first AND d.head = c.head
)
SELECT j.model, g.row_id AS "row", coalesce(g.view, 'no view') AS view, g.why,
       count(DISTINCT j.id) AS "left in", min(j.jobs) AS "of jobs", count(DISTINCT j.serial) AS engines,
       round(sum(g.airfoils)::numeric / count(DISTINCT j.id), 1) AS "airfoils each",
       (SELECT string_agg(DISTINCT name, ' ') FROM unnest(min(r.zones)) WITH ORDINALITY AS z (name, i)
        WHERE bit_or(g.zones) >> (i - 1)::int & 1 = 1) AS zones
FROM job j
JOIN everyblade.gap g ON g.derived = j.id
JOIN everyblade.blade_row r ON r.derived = j.id AND r.row_id = g.row_id
GROUP BY j.model, g.row_id, coalesce(g.view, 'no view'), g.why
HAVING count(DISTINCT j.id) > 1
ORDER BY count(DISTINCT j.id)::numeric / min(j.jobs) DESC, sum(g.airfoils) DESC, j.model, g.row_id
