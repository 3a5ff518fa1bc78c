-- Every key begins with the flyer, so that the tables can be distributed by flyer.
create table flyer (
    id uuid not null primary key,
    name varchar(100) not null,
    created_at timestamp(6) with time zone not null
);

insert into flyer (id, name, created_at)
values ('00000000-0000-7000-8000-000000000001', 'local', timestamp with time zone '2026-01-01 00:00:00+00');

create table airframe (
    flyer_id uuid not null references flyer (id),
    id uuid not null,
    name varchar(80) not null,
    units varchar(10) not null,
    outer_diameter_value varchar(48),
    outer_diameter_unit varchar(12),
    notes varchar(2000),
    created_at timestamp(6) with time zone not null,
    archived_at timestamp(6) with time zone,
    version bigint not null,
    primary key (flyer_id, id)
);

create table joint (
    flyer_id uuid not null,
    id uuid not null,
    airframe_id uuid not null,
    name varchar(80) not null,
    event varchar(20) not null,
    current_revision integer not null,
    created_at timestamp(6) with time zone not null,
    version bigint not null,
    primary key (flyer_id, id),
    foreign key (flyer_id, airframe_id) references airframe (flyer_id, id)
);

create index joint_by_airframe on joint (flyer_id, airframe_id, id);

create table setup (
    flyer_id uuid not null,
    id uuid not null,
    joint_id uuid not null,
    revision integer not null,
    document varchar(200000) not null,
    created_at timestamp(6) with time zone not null,
    primary key (flyer_id, id),
    unique (flyer_id, joint_id, revision),
    foreign key (flyer_id, joint_id) references joint (flyer_id, id)
);

create table ground_test (
    flyer_id uuid not null,
    id uuid not null,
    occasion varchar(10) not null,
    joint_id uuid not null,
    setup_id uuid not null,
    setup_revision integer not null,
    charge_value varchar(48) not null,
    charge_unit varchar(12) not null,
    outcome varchar(12) not null,
    damaged boolean not null,
    speed_value varchar(48),
    speed_unit varchar(12),
    containment varchar(12),
    notes varchar(2000),
    fired_at timestamp(6) with time zone not null,
    fired_offset_seconds integer not null,
    received_at timestamp(6) with time zone not null,
    predicted_separated double precision not null,
    predicted_partial double precision not null,
    predicted_none double precision not null,
    factor_median double precision not null,
    factor_low double precision not null,
    factor_high double precision not null,
    primary key (flyer_id, id),
    foreign key (flyer_id, joint_id) references joint (flyer_id, id),
    foreign key (flyer_id, setup_id) references setup (flyer_id, id)
);

create index ground_test_by_joint on ground_test (flyer_id, joint_id, occasion, fired_at desc, id desc);

-- Append-only: the newest row of a test says whether it counts.
create table ground_test_void (
    flyer_id uuid not null,
    id uuid not null,
    test_id uuid not null,
    sequence integer not null,
    voided boolean not null,
    reason varchar(500) not null,
    at timestamp(6) with time zone not null,
    primary key (flyer_id, id),
    unique (flyer_id, test_id, sequence),
    foreign key (flyer_id, test_id) references ground_test (flyer_id, id)
);

create table idempotent_answer (
    flyer_id uuid not null,
    operation varchar(120) not null,
    idempotency_key varchar(128) not null,
    fingerprint varchar(64) not null,
    status integer not null,
    location varchar(300),
    entity_tag varchar(100),
    body varchar(500000) not null,
    created_at timestamp(6) with time zone not null,
    primary key (flyer_id, operation, idempotency_key)
);
