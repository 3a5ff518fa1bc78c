create table load_out (
    flyer_id uuid not null,
    id uuid not null,
    airframe_id uuid not null,
    document varchar(200000) not null,
    created_at timestamp(6) with time zone not null,
    version bigint not null,
    primary key (flyer_id, id),
    foreign key (flyer_id, airframe_id) references airframe (flyer_id, id)
);

create index load_out_by_airframe on load_out (flyer_id, airframe_id, id);
