-- What names a person is sealed under a key of its own submission (or day), so that it can be forgotten.
CREATE TABLE case_keys (
    scope TEXT NOT NULL,
    owner BIGINT NOT NULL,
    wrapped ${bytes} NOT NULL,
    PRIMARY KEY (scope, owner)
);

-- Assessments and suggestions were plain text before: they are made anew from the messages, sealed.
ALTER TABLE assessments ADD COLUMN sealed ${bytes};
ALTER TABLE assessments DROP COLUMN content;
DELETE FROM suggested_replies;
ALTER TABLE suggested_replies ADD COLUMN sealed ${bytes};
ALTER TABLE suggested_replies DROP COLUMN reply;
INSERT INTO work (kind, key, due, free_from, tries)
    SELECT 'ASSESS', id, taken, 0, 0 FROM messages WHERE findings IS NOT NULL ON CONFLICT DO NOTHING;

ALTER TABLE judgements ADD COLUMN sealed_note ${bytes};

CREATE TABLE claims (
    submission BIGINT PRIMARY KEY,
    who TEXT NOT NULL,
    until BIGINT NOT NULL
);

CREATE TABLE readings (
    submission BIGINT NOT NULL,
    number INTEGER NOT NULL,
    sealed ${bytes} NOT NULL,
    who TEXT NOT NULL,
    made BIGINT NOT NULL,
    PRIMARY KEY (submission, number)
);

-- How a submission came to be closed, or was opened again.
CREATE TABLE endings (
    id ${identity},
    submission BIGINT NOT NULL,
    kind TEXT NOT NULL,
    reason_code TEXT NOT NULL,
    who TEXT NOT NULL,
    made BIGINT NOT NULL
);
CREATE INDEX endings_by_submission ON endings (submission);

-- A person says which test a message is for; the newest counts.
CREATE TABLE person_links (
    id ${identity},
    message BIGINT NOT NULL REFERENCES messages (id),
    ref TEXT NOT NULL,
    attempt INTEGER NOT NULL,
    who TEXT NOT NULL,
    made BIGINT NOT NULL
);
CREATE INDEX person_links_by_message ON person_links (message);

-- A message that shows the cassettes of several tests: each further test is a submission of its own over the same message.
CREATE TABLE parts (
    submission BIGINT PRIMARY KEY,
    message BIGINT NOT NULL REFERENCES messages (id),
    ref TEXT NOT NULL,
    attempt INTEGER NOT NULL,
    who TEXT NOT NULL,
    made BIGINT NOT NULL
);
CREATE INDEX parts_by_message ON parts (message);

-- The observer's record as people write it down here; it stands over the book and outlives its imports.
CREATE TABLE observations (
    id ${identity},
    ref TEXT NOT NULL,
    attempt INTEGER NOT NULL,
    record TEXT NOT NULL,
    who TEXT NOT NULL,
    made BIGINT NOT NULL
);

ALTER TABLE quarantined_lots ADD COLUMN reason TEXT;
ALTER TABLE quarantined_lots ADD COLUMN who TEXT;

-- State and dates in the open, so that sending needs no key before it sends; the letter itself sealed.
CREATE TABLE outbox (
    id ${identity},
    submission BIGINT,
    kind TEXT NOT NULL,
    state TEXT NOT NULL,
    scope TEXT NOT NULL,
    owner BIGINT NOT NULL,
    sealed ${bytes},
    address_mark TEXT NOT NULL,
    message_id TEXT NOT NULL UNIQUE,
    reason_code TEXT NOT NULL,
    who TEXT NOT NULL,
    made BIGINT NOT NULL,
    not_before BIGINT NOT NULL,
    not_after BIGINT,
    attempted BIGINT,
    finished BIGINT,
    tries INTEGER NOT NULL,
    outcome TEXT,
    version INTEGER NOT NULL
);
CREATE INDEX outbox_by_state ON outbox (state, not_before);
CREATE INDEX outbox_by_submission ON outbox (submission);
CREATE INDEX outbox_by_address ON outbox (address_mark, made);
CREATE INDEX outbox_by_made ON outbox (made);

CREATE TABLE waits (
    submission BIGINT PRIMARY KEY,
    until BIGINT NOT NULL,
    since BIGINT NOT NULL
);
