-- What the policy of unattended answers did about each assessment: codes only, so that it may outlive the case.
CREATE TABLE policy_acts (
    submission BIGINT NOT NULL,
    assessment INTEGER NOT NULL,
    act TEXT NOT NULL,
    codes TEXT NOT NULL,
    letter BIGINT,
    rules TEXT NOT NULL,
    made BIGINT NOT NULL,
    PRIMARY KEY (submission, assessment)
);
CREATE INDEX policy_acts_by_made ON policy_acts (made);
CREATE INDEX policy_acts_by_letter ON policy_acts (letter);
