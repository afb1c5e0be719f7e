CREATE TABLE course (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    text TEXT NOT NULL
) STRICT;

CREATE TABLE course_group (
    id INTEGER PRIMARY KEY,
    course_id INTEGER NOT NULL REFERENCES course (id),
    name TEXT NOT NULL CHECK (trim(name) <> ''),
    start TEXT,
    place TEXT NOT NULL
) STRICT;

CREATE INDEX course_group_course ON course_group (course_id);

CREATE TABLE student (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (trim(name) <> ''),
    left_handed INTEGER NOT NULL CHECK (left_handed IN (0, 1)),
    large_print INTEGER NOT NULL CHECK (large_print IN (0, 1)),
    note TEXT NOT NULL
) STRICT;

CREATE TABLE enrolment (
    group_id INTEGER NOT NULL REFERENCES course_group (id),
    student_id INTEGER NOT NULL REFERENCES student (id),
    place INTEGER NOT NULL,
    PRIMARY KEY (group_id, student_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX enrolment_student ON enrolment (student_id);

CREATE TABLE session (
    id INTEGER PRIMARY KEY,
    group_id INTEGER NOT NULL REFERENCES course_group (id),
    date TEXT NOT NULL,
    lesson INTEGER,
    reached TEXT NOT NULL,
    remember TEXT NOT NULL,
    UNIQUE (group_id, id)
) STRICT;

CREATE TABLE register (
    group_id INTEGER NOT NULL,
    session_id INTEGER NOT NULL,
    student_id INTEGER NOT NULL,
    attendance TEXT NOT NULL CHECK (attendance IN ('there', 'absent', 'late', 'caught-up')),
    PRIMARY KEY (session_id, student_id),
    FOREIGN KEY (group_id, session_id) REFERENCES session (group_id, id),
    FOREIGN KEY (group_id, student_id) REFERENCES enrolment (group_id, student_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX register_student ON register (group_id, student_id);

CREATE TABLE report (
    id INTEGER PRIMARY KEY,
    group_id INTEGER NOT NULL,
    student_id INTEGER NOT NULL,
    part TEXT NOT NULL,
    round INTEGER NOT NULL CHECK (round >= 0),
    kind TEXT NOT NULL CHECK (kind IN ('counted', 'unfinished', 'pulled-back')),
    count INTEGER CHECK (count >= 0),
    at TEXT NOT NULL,
    note TEXT NOT NULL,
    withdrawn TEXT,
    CHECK (kind <> 'counted' OR count IS NOT NULL),
    FOREIGN KEY (group_id, student_id) REFERENCES enrolment (group_id, student_id)
) STRICT;

CREATE INDEX report_student ON report (group_id, student_id);

CREATE TABLE answer (
    report_id INTEGER NOT NULL REFERENCES report (id),
    check_name TEXT NOT NULL,
    answer TEXT NOT NULL,
    PRIMARY KEY (report_id, check_name)
) STRICT, WITHOUT ROWID;

CREATE TABLE note (
    group_id INTEGER NOT NULL,
    student_id INTEGER NOT NULL,
    part TEXT NOT NULL,
    round INTEGER NOT NULL,
    text TEXT NOT NULL,
    PRIMARY KEY (group_id, student_id, part, round),
    FOREIGN KEY (group_id, student_id) REFERENCES enrolment (group_id, student_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE setting (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
