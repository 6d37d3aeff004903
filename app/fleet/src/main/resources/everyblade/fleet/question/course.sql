SELECT c.site, c.model, c.serial, c.begun, sum(bit_count(a.seen::bit(64))) AS seen,
       sum(bit_count(((a.part | a.maybe | a.unseen) & ~a.no_view)::bit(64))) AS "left",
       (SELECT count(*) FROM everyblade.finding f WHERE f.derived = d.id) AS findings, left(c.first, 12) AS job
FROM everyblade.chain c
JOIN everyblade.derived d ON d.chain = c.first AND d.head = c.head
JOIN everyblade.airfoil a ON a.derived = d.id
GROUP BY c.first, d.id
ORDER BY c.model, c.serial, c.begun, c.first
