SELECT c.site, c.model, c.serial, u.number, u.unit,
       CASE u.unit WHEN 'days' THEN to_char(u.since AT TIME ZONE 'UTC' + u.number * interval '1 day', 'YYYY-MM-DD')
            WHEN 'cycles' THEN (d.cycles + u.number)::text || ' cycles'
            ELSE (d.hours + u.number)::text || ' hours' END AS "at",
       CASE u.unit WHEN 'days' THEN ((u.since + u.number * interval '1 day')::date - now()::date) END AS "days left",
       u.since AS asked, left(c.first, 12) AS job, u.entry
FROM everyblade.chain c
JOIN everyblade.derived d ON d.chain = c.first AND d.head = c.head
JOIN everyblade.due u ON u.derived = d.id
ORDER BY "days left" NULLS LAST, u.unit, u.number, c.site, c.model, c.serial, u.entry
