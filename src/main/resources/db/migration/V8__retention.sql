-- What a message shows, as far as it decides how long it is kept: IDENTITY, PHOTO or WORDS; null until it is looked into.
ALTER TABLE messages ADD COLUMN shows TEXT;
-- When the sealed bytes of a forgotten message were taken away.
ALTER TABLE messages ADD COLUMN dropped BIGINT;
CREATE INDEX messages_by_taken ON messages (taken);

-- What is kept beyond its time because someone needs it: the reason is a code.
CREATE TABLE retention_holds (
    submission BIGINT PRIMARY KEY,
    reason_code TEXT NOT NULL,
    who TEXT NOT NULL,
    made BIGINT NOT NULL
);
