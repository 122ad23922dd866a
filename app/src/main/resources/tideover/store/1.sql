create table plan (
    id integer primary key autoincrement,
    name text not null,
    text text not null,
    revision integer not null,
    changed text not null,
    deleted text
) strict;
create table plan_file (
    plan integer not null references plan (id) on delete cascade,
    name text not null,
    bytes blob not null,
    primary key (plan, name)
) strict;
create table earlier (
    plan integer not null references plan (id) on delete cascade,
    revision integer not null,
    name text not null,
    text text not null,
    primary key (plan, revision)
) strict;
create table setting (
    key text primary key,
    value text not null
) strict;
