-- Which letter reminded of which test: at most one for each slot of it.
CREATE TABLE reminders (
    ref TEXT NOT NULL,
    attempt INTEGER NOT NULL,
    slot BIGINT NOT NULL,
    letter BIGINT NOT NULL,
    PRIMARY KEY (ref, attempt, slot)
);
CREATE INDEX reminders_by_letter ON reminders (letter);
CREATE INDEX observations_by_test ON observations (ref, attempt);
CREATE INDEX submissions_by_arrived ON submissions (arrived);
