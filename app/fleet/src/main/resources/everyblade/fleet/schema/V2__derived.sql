-- What is computed of a record, so that questions need not fold thousands of journals. It can be thrown away at any time:
-- it counts only while it is of the chain's head, and is made again of the lines alone.

SET LOCAL ROLE everyblade_owner;
SET LOCAL search_path = everyblade;

CREATE TABLE derived (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  chain text NOT NULL REFERENCES chain (first),
  head text NOT NULL,
  program text NOT NULL CHECK (length(program) <= 200),
  cycles numeric,
  hours numeric,
  made_by name NOT NULL DEFAULT session_user,
  made_at timestamptz NOT NULL DEFAULT clock_timestamp(),
  UNIQUE (chain, head, program)
);

-- A row of the engine, and what its zones are called: bit i of a mask is zones[i + 1].
CREATE TABLE blade_row (
  derived bigint NOT NULL REFERENCES derived (id) ON DELETE CASCADE,
  row_id text NOT NULL,
  basis text NOT NULL,
  airfoils int NOT NULL,
  zones text[] NOT NULL,
  PRIMARY KEY (derived, row_id)
);

-- Each airfoil's zones by their state; zones that no view shows are among the unseen as well.
CREATE TABLE airfoil (
  derived bigint NOT NULL REFERENCES derived (id) ON DELETE CASCADE,
  row_id text NOT NULL,
  n int NOT NULL,
  seen bigint NOT NULL,
  part bigint NOT NULL,
  maybe bigint NOT NULL,
  unseen bigint NOT NULL,
  no_view bigint NOT NULL,
  accepted bigint NOT NULL,
  PRIMARY KEY (derived, row_id, n)
);

CREATE INDEX airfoil_left ON airfoil (derived) WHERE unseen | maybe <> 0;

-- Sizes in mm.
CREATE TABLE finding (
  derived bigint NOT NULL REFERENCES derived (id) ON DELETE CASCADE,
  entry int NOT NULL,
  kind text NOT NULL,
  row_id text NOT NULL,
  airfoil int NOT NULL,
  zones bigint NOT NULL,
  length numeric,
  depth numeric,
  width numeric,
  PRIMARY KEY (derived, entry)
);

CREATE TABLE gap (
  derived bigint NOT NULL REFERENCES derived (id) ON DELETE CASCADE,
  number int NOT NULL,
  row_id text NOT NULL,
  airfoils int NOT NULL,
  zones bigint NOT NULL,
  why text NOT NULL,
  view text,
  PRIMARY KEY (derived, number)
);

CREATE TABLE view_used (
  derived bigint NOT NULL REFERENCES derived (id) ON DELETE CASCADE,
  row_id text NOT NULL,
  view text NOT NULL,
  legs int NOT NULL,
  PRIMARY KEY (derived, row_id, view)
);

CREATE TABLE open_item (
  derived bigint NOT NULL REFERENCES derived (id) ON DELETE CASCADE,
  number int NOT NULL,
  kind text NOT NULL,
  entry int,
  what text NOT NULL,
  place text NOT NULL,
  since timestamptz,
  PRIMARY KEY (derived, number)
);

CREATE TABLE due (
  derived bigint NOT NULL REFERENCES derived (id) ON DELETE CASCADE,
  entry int NOT NULL,
  number numeric NOT NULL,
  unit text NOT NULL CHECK (unit IN ('cycles', 'hours', 'days')),
  since timestamptz NOT NULL,
  PRIMARY KEY (derived, entry)
);

-- Only of a head that is, and instead of what was derived before.
CREATE FUNCTION derive() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = everyblade, pg_temp
AS $$
BEGIN
  PERFORM FROM chain WHERE first = NEW.chain AND kind = 'journal' AND head = NEW.head FOR UPDATE;
  IF NOT FOUND THEN
    RAISE EXCEPTION 'the journal has another head' USING ERRCODE = 'EB004';
  END IF;
  DELETE FROM derived WHERE chain = NEW.chain;
  RETURN NEW;
END $$;
CREATE TRIGGER derive BEFORE INSERT ON derived FOR EACH ROW EXECUTE FUNCTION derive();
REVOKE ALL ON FUNCTION derive() FROM PUBLIC;

GRANT SELECT ON derived, blade_row, airfoil, finding, gap, view_used, open_item, due
  TO everyblade_technician, everyblade_reviewer, everyblade_reader;
GRANT INSERT (chain, head, program, cycles, hours) ON derived TO everyblade_technician;
GRANT INSERT ON blade_row, airfoil, finding, gap, view_used, open_item, due TO everyblade_technician;

ALTER TABLE derived ENABLE ROW LEVEL SECURITY;
CREATE POLICY of_seen ON derived FOR SELECT USING (chain IN (SELECT first FROM chain));
CREATE POLICY technician ON derived FOR INSERT TO everyblade_technician
  WITH CHECK (EXISTS (SELECT FROM chain c WHERE c.first = chain AND c.site = ANY ((SELECT sites())::text[])));

DO $$
DECLARE
  part text;
BEGIN
  FOREACH part IN ARRAY ARRAY['blade_row', 'airfoil', 'finding', 'gap', 'view_used', 'open_item', 'due'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', part);
    EXECUTE format('CREATE POLICY of_seen ON %I FOR SELECT USING (derived IN (SELECT id FROM derived))', part);
    -- Only in the very transaction that made what it belongs to, so that nobody adds to it later.
    EXECUTE format('CREATE POLICY technician ON %I FOR INSERT TO everyblade_technician WITH CHECK (derived IN '
        '(SELECT id FROM derived WHERE made_by = session_user AND xmin = pg_current_xact_id()::xid))', part);
  END LOOP;
END $$;

RESET ROLE;
