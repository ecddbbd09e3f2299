CREATE TABLE entry (
    arrival INTEGER PRIMARY KEY AUTOINCREMENT,
    id TEXT NOT NULL UNIQUE CHECK (length(id) = 36),
    subject TEXT NOT NULL CHECK (length(subject) > 0),
    aspect TEXT NOT NULL CHECK (length(aspect) > 0),
    value TEXT NOT NULL CHECK (json_valid(value)),
    entered_at TEXT NOT NULL CHECK (entered_at GLOB '????-??-??T??:??:??*Z'),
    zone TEXT NOT NULL CHECK (length(zone) > 0),
    who TEXT NOT NULL CHECK (length(who) > 0),
    reason TEXT CHECK (length(reason) > 0),
    supersedes TEXT REFERENCES entry (id),
    CHECK (supersedes IS NULL OR reason IS NOT NULL),
    CHECK (supersedes IS NULL OR supersedes <> id)
) STRICT;

CREATE INDEX entry_by_subject ON entry (subject, aspect);
CREATE INDEX entry_by_aspect ON entry (aspect);

-- Entries are never changed: whatever writes to this file, the program included, is held to it.
CREATE TRIGGER entry_keeps_its_words BEFORE UPDATE ON entry
BEGIN
    SELECT RAISE(ABORT, 'entries are never changed: enter a correction instead');
END;

CREATE TRIGGER entry_stays BEFORE DELETE ON entry
BEGIN
    SELECT RAISE(ABORT, 'entries are never deleted: enter a correction instead');
END;

-- INSERT OR REPLACE deletes without asking the trigger above.
CREATE TRIGGER entry_is_not_replaced BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM entry WHERE id = NEW.id OR arrival = NEW.arrival)
BEGIN
    SELECT RAISE(ABORT, 'entries are never replaced: enter a correction instead');
END;

CREATE TRIGGER entry_supersedes_its_like BEFORE INSERT ON entry
WHEN NEW.supersedes IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM entry
    WHERE id = NEW.supersedes AND subject = NEW.subject AND aspect = NEW.aspect)
BEGIN
    SELECT RAISE(ABORT, 'a correction supersedes an entry of the same subject and aspect');
END;
