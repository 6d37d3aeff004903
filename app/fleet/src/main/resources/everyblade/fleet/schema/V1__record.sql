-- The record: chains of lines, byte for byte as they were sealed, and the files that belong to them.
-- All of it belongs to a role that nobody can log in as. Those who work with it may read and insert, never change.

DO $$
DECLARE
  wanted text;
BEGIN
  FOREACH wanted IN ARRAY ARRAY['everyblade_owner', 'everyblade_technician', 'everyblade_reviewer', 'everyblade_reader'] LOOP
    IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = wanted) THEN
      EXECUTE format('CREATE ROLE %I NOLOGIN', wanted);
    END IF;
  END LOOP;
END $$;

REVOKE ALL ON SCHEMA everyblade FROM PUBLIC;
GRANT USAGE ON SCHEMA everyblade TO everyblade_technician, everyblade_reviewer, everyblade_reader;
GRANT USAGE, CREATE ON SCHEMA everyblade TO everyblade_owner;
SET LOCAL ROLE everyblade_owner;
SET LOCAL search_path = everyblade;

-- Who works where; * is every site, and of use only to read.
CREATE TABLE member (
  login name NOT NULL,
  site text NOT NULL CHECK (site ~ '^[a-z0-9][a-z0-9-]{0,39}$' OR site = '*'),
  PRIMARY KEY (login, site)
);

-- A journal, or what reviewers said of one. The lines tell everything else of it, so a trigger fills that in.
CREATE TABLE chain (
  first text PRIMARY KEY CHECK (first ~ '^[0-9a-f]{64}$'),
  kind text NOT NULL CHECK (kind IN ('journal', 'review')),
  job text NOT NULL REFERENCES chain (first),
  site text NOT NULL CHECK (site ~ '^[a-z0-9][a-z0-9-]{0,39}$'),
  year int NOT NULL CHECK (year BETWEEN 1950 AND 2199),
  entries int NOT NULL DEFAULT -1,
  head text NOT NULL DEFAULT '',
  model text,
  serial text,
  task text,
  begun_by text,
  begun timestamptz,
  opened_by name NOT NULL DEFAULT session_user,
  CHECK (kind = 'review' OR job = first)
);
CREATE INDEX chain_job ON chain (job);
CREATE INDEX chain_engine ON chain (model, serial, begun);

-- One part for each year in which jobs began, so that years can be taken off as a whole.
CREATE TABLE line (
  year int NOT NULL,
  chain text NOT NULL,
  n int NOT NULL CHECK (n >= 0),
  raw bytea NOT NULL CHECK (octet_length(raw) BETWEEN 76 AND 1048576 AND position('\x0a'::bytea IN raw) = 0),
  hash text NOT NULL CHECK (length(hash) = 64),
  kept_by name NOT NULL DEFAULT session_user,
  kept_at timestamptz NOT NULL DEFAULT clock_timestamp(),
  PRIMARY KEY (chain, n, year)
) PARTITION BY LIST (year);

-- Models, limits, pictures, signatures: by what they are.
CREATE TABLE content (
  hash text PRIMARY KEY,
  bytes bytea NOT NULL,
  kept_by name NOT NULL DEFAULT session_user,
  kept_at timestamptz NOT NULL DEFAULT clock_timestamp(),
  CHECK (hash = encode(sha256(bytes), 'hex'))
);
ALTER TABLE content ALTER COLUMN bytes SET STORAGE EXTERNAL;

-- Which job has them, and under which name.
CREATE TABLE file (
  job text NOT NULL REFERENCES chain (first),
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 300 AND name !~ '(^|/)\.' AND name !~ '[\\:*?"<>|[:cntrl:]]'),
  hash text NOT NULL REFERENCES content (hash),
  kept_by name NOT NULL DEFAULT session_user,
  kept_at timestamptz NOT NULL DEFAULT clock_timestamp(),
  PRIMARY KEY (job, name)
);
CREATE INDEX file_hash ON file (hash);

-- A job was gone on with in two places: what stands here is the one that was refused.
CREATE TABLE parting (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  chain text NOT NULL REFERENCES chain (first),
  n int NOT NULL,
  head text NOT NULL CHECK (head ~ '^[0-9a-f]{64}$'),
  said_by text NOT NULL CHECK (length(said_by) <= 1000),
  said_at text NOT NULL CHECK (length(said_at) <= 40),
  place text NOT NULL CHECK (length(place) <= 1000),
  told_by name NOT NULL DEFAULT session_user,
  told_at timestamptz NOT NULL DEFAULT clock_timestamp(),
  UNIQUE (chain, head, place)
);

CREATE FUNCTION sites() RETURNS text[]
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = everyblade, pg_temp
AS $$ SELECT coalesce(array_agg(site), '{}') FROM member WHERE login = session_user $$;

-- Which of these contents the store has already, so that a picture travels once.
CREATE FUNCTION has(wanted text[]) RETURNS SETOF text
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = everyblade, pg_temp
AS $$ SELECT hash FROM content WHERE hash = ANY (wanted) $$;

CREATE FUNCTION open_year(wanted int) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = everyblade, pg_temp
AS $$
BEGIN
  IF to_regclass(format('everyblade.line_%s', wanted)) IS NULL THEN
    LOCK TABLE member IN SHARE ROW EXCLUSIVE MODE; -- one at a time; those who read it go on
    IF to_regclass(format('everyblade.line_%s', wanted)) IS NULL THEN
      EXECUTE format('CREATE TABLE line_%s (LIKE line INCLUDING ALL)', wanted);
      EXECUTE format('ALTER TABLE line ATTACH PARTITION line_%s FOR VALUES IN (%s)', wanted, wanted);
    END IF;
  END IF;
END $$;

-- A new chain is empty; a review stands where its journal does.
CREATE FUNCTION open_chain() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = everyblade, pg_temp
AS $$
BEGIN
  IF NEW.kind = 'review' THEN
    SELECT site, year INTO NEW.site, NEW.year FROM chain WHERE first = NEW.job AND kind = 'journal';
  ELSIF NEW.year > extract(year FROM now()) + 1 THEN
    RAISE EXCEPTION 'a job cannot begin in %', NEW.year USING ERRCODE = 'EB003';
  ELSE
    PERFORM open_year(NEW.year);
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER open_chain BEFORE INSERT ON chain FOR EACH ROW EXECUTE FUNCTION open_chain();

-- What the first line says of its chain, if it may begin it.
CREATE FUNCTION begin_chain(begun_chain chain, raw bytea) RETURNS void
LANGUAGE plpgsql SET search_path = everyblade, pg_temp
AS $$
DECLARE
  said jsonb := convert_from(raw, 'UTF8')::jsonb;
  since timestamptz;
BEGIN
  IF begun_chain.kind = 'review' THEN
    IF said ->> 'schema' IS DISTINCT FROM 'everyblade/review/1' OR said ->> 'job' IS DISTINCT FROM begun_chain.job THEN
      RAISE EXCEPTION 'this is no review of that job' USING ERRCODE = 'EB003';
    END IF;
    RETURN;
  END IF;
  since := (said ->> 'at')::timestamptz;
  IF said ->> 'schema' !~ '^everyblade/journal/1(\.[0-9]+)?$' OR since IS NULL
     OR extract(year FROM since AT TIME ZONE 'UTC') <> begun_chain.year THEN
    RAISE EXCEPTION 'this is no job of that year' USING ERRCODE = 'EB003';
  END IF;
  UPDATE chain SET model = said ->> 'model', serial = said ->> 'serial', task = said ->> 'task',
      begun_by = said ->> 'by', begun = since WHERE first = begun_chain.first;
END $$;

-- Every line must be the one that was sealed after the one before; then the head moves. This is all that ever moves it.
CREATE FUNCTION follow() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = everyblade, pg_temp
AS $$
DECLARE
  piece record;
  onto chain;
  wrong int;
BEGIN
  FOR piece IN SELECT chain AS first, min(n) AS low, max(n) AS high, count(*) AS many FROM added GROUP BY chain ORDER BY chain LOOP
    SELECT * INTO onto FROM chain WHERE first = piece.first FOR UPDATE;
    IF NOT FOUND OR piece.low <> onto.entries + 1 OR piece.many <> piece.high - piece.low + 1 THEN
      RAISE EXCEPTION 'line % of % does not follow line %', piece.low, piece.first, onto.entries USING ERRCODE = 'EB001';
    END IF;
    SELECT n INTO wrong
    FROM (SELECT year, n, raw, hash, lag(hash, 1, onto.head) OVER (ORDER BY n) AS before
          FROM added WHERE chain = piece.first) AS each
    WHERE year <> onto.year
      OR hash <> encode(sha256(convert_to(before, 'UTF8') || substring(raw FROM 1 FOR octet_length(raw) - 75)), 'hex')
      OR substring(raw FROM octet_length(raw) - 74) <> convert_to(',"hash":"' || hash || '"}', 'UTF8')
      OR (n = 0 AND hash <> piece.first)
    ORDER BY n LIMIT 1;
    IF FOUND THEN
      RAISE EXCEPTION 'line % of % is not the one that was sealed after the one before', wrong, piece.first USING ERRCODE = 'EB002';
    END IF;
    IF piece.low = 0 THEN
      PERFORM begin_chain(onto, raw) FROM added WHERE chain = piece.first AND n = 0;
    END IF;
    UPDATE chain SET entries = piece.high, head = (SELECT hash FROM added WHERE chain = piece.first AND n = piece.high)
    WHERE first = piece.first;
    PERFORM pg_notify('everyblade', piece.first);
  END LOOP;
  RETURN NULL;
END $$;
CREATE TRIGGER follow AFTER INSERT ON line REFERENCING NEW TABLE AS added FOR EACH STATEMENT EXECUTE FUNCTION follow();

REVOKE ALL ON FUNCTION open_year(int), open_chain(), begin_chain(chain, bytea), follow() FROM PUBLIC;

-- Who sees and says what.
ALTER TABLE chain ENABLE ROW LEVEL SECURITY;
ALTER TABLE line ENABLE ROW LEVEL SECURITY;
ALTER TABLE content ENABLE ROW LEVEL SECURITY;
ALTER TABLE file ENABLE ROW LEVEL SECURITY;
ALTER TABLE parting ENABLE ROW LEVEL SECURITY;

GRANT SELECT ON chain, line, content, file, parting TO everyblade_technician, everyblade_reviewer, everyblade_reader;
GRANT INSERT (first, kind, job, site, year) ON chain TO everyblade_technician, everyblade_reviewer;
GRANT INSERT (year, chain, n, raw, hash) ON line TO everyblade_technician, everyblade_reviewer;
GRANT INSERT (hash, bytes) ON content TO everyblade_technician, everyblade_reviewer;
GRANT INSERT (job, name, hash) ON file TO everyblade_technician, everyblade_reviewer;
GRANT INSERT (chain, n, head, said_by, said_at, place) ON parting TO everyblade_technician, everyblade_reviewer;

CREATE POLICY own_sites ON chain FOR SELECT
  USING (site = ANY ((SELECT sites())::text[]) OR '*' = ANY ((SELECT sites())::text[]));
CREATE POLICY of_seen ON line FOR SELECT USING (chain IN (SELECT first FROM chain));
CREATE POLICY of_seen ON file FOR SELECT USING (job IN (SELECT first FROM chain));
CREATE POLICY of_seen ON parting FOR SELECT USING (chain IN (SELECT first FROM chain));
CREATE POLICY of_seen ON content FOR SELECT USING (EXISTS (SELECT FROM file WHERE file.hash = content.hash));

CREATE POLICY technician ON chain FOR INSERT TO everyblade_technician
  WITH CHECK (site = ANY ((SELECT sites())::text[]));
CREATE POLICY reviewer ON chain FOR INSERT TO everyblade_reviewer
  WITH CHECK (kind = 'review' AND (site = ANY ((SELECT sites())::text[]) OR '*' = ANY ((SELECT sites())::text[])));
CREATE POLICY technician ON line FOR INSERT TO everyblade_technician
  WITH CHECK (EXISTS (SELECT FROM chain c WHERE c.first = chain AND c.site = ANY ((SELECT sites())::text[])));
CREATE POLICY reviewer ON line FOR INSERT TO everyblade_reviewer
  WITH CHECK (EXISTS (SELECT FROM chain c WHERE c.first = chain AND c.kind = 'review'));
CREATE POLICY writer ON content FOR INSERT TO everyblade_technician, everyblade_reviewer WITH CHECK (true);
CREATE POLICY technician ON file FOR INSERT TO everyblade_technician
  WITH CHECK (EXISTS (SELECT FROM chain c WHERE c.first = job AND c.kind = 'journal' AND c.site = ANY ((SELECT sites())::text[])));
CREATE POLICY reviewer ON file FOR INSERT TO everyblade_reviewer
  WITH CHECK (name LIKE 'signatures/%' AND EXISTS (SELECT FROM chain c WHERE c.first = job AND c.kind = 'journal'));
CREATE POLICY writer ON parting FOR INSERT TO everyblade_technician, everyblade_reviewer
  WITH CHECK (chain IN (SELECT first FROM chain));

RESET ROLE;
