CREATE TABLE note (words TEXT NOT NULL) STRICT;
INSERT INTO note (words) VALUES ('as a later version might');
