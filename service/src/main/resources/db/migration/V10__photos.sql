-- One photo of a test. What is told of it and its bytes are kept apart, so that no list reads bytes.
create table photo (
    flyer_id uuid not null,
    test_id uuid not null,
    media_type varchar(20) not null,
    width integer not null,
    height integer not null,
    bytes integer not null,
    digest varchar(64) not null,
    stored_at timestamp(6) with time zone not null,
    primary key (flyer_id, test_id),
    foreign key (flyer_id, test_id) references ground_test (flyer_id, id)
);

create table photo_content (
    flyer_id uuid not null,
    test_id uuid not null,
    content bytea not null,
    primary key (flyer_id, test_id),
    foreign key (flyer_id, test_id) references photo (flyer_id, test_id) on delete cascade
);
