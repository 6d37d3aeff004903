SELECT c.site, (now()::date - coalesce(o.since, c.begun)::date) AS days, o.kind, c.model, c.serial, o.entry, o.what,
       o.place AS "where", left(c.first, 12) AS job
FROM everyblade.chain c
JOIN everyblade.derived d ON d.chain = c.first AND d.head = c.head
JOIN everyblade.open_item o ON o.derived = d.id
ORDER BY c.site, days DESC, c.model, c.serial, c.first, o.number
