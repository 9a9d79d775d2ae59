-- Which pictures of the message a part holds; ended when it was brought together with another submission again.
ALTER TABLE parts ADD COLUMN pictures TEXT NOT NULL DEFAULT '[]';
ALTER TABLE parts ADD COLUMN ended BIGINT;
-- Which pictures a split message leaves to its own submission; all where null.
ALTER TABLE messages ADD COLUMN own_pictures TEXT;
