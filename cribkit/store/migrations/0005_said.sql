-- What the files last said of an item's condition. A file that says the same as before does not undo what happened
-- since: a wrench that broke on a job stays damaged although the folder is loaded again.
ALTER TABLE item ADD COLUMN said_condition TEXT NOT NULL DEFAULT 'ok';
UPDATE item SET said_condition = condition;
