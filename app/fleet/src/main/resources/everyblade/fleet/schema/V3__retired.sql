-- A year of jobs that was taken off: of each chain stays that it was here, how it ended, and when it went. No lines came, as
-- for all else that reads this table; entries are −1 again.
SET LOCAL ROLE everyblade_owner;
SET LOCAL search_path = everyblade;

ALTER TABLE chain ADD COLUMN retired timestamptz;

RESET ROLE;
