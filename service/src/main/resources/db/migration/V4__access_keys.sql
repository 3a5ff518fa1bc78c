-- Keys and the sessions of browsers, which are short-lived keys of their own. Only the SHA-256 of a key is kept.
create table access_key (
    flyer_id uuid not null references flyer (id),
    id uuid not null,
    parent_id uuid,
    name varchar(80) not null,
    scope varchar(12) not null,
    prefix varchar(16) not null,
    digest varchar(64) not null,
    created_at timestamp(6) with time zone not null,
    expires_at timestamp(6) with time zone,
    last_used_at timestamp(6) with time zone,
    revoked_at timestamp(6) with time zone,
    primary key (flyer_id, id),
    foreign key (flyer_id, parent_id) references access_key (flyer_id, id)
);

create unique index access_key_by_digest on access_key (digest);
