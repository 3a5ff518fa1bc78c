-- Lists of airframes are read newest first.
create index airframe_newest on airframe (flyer_id, created_at desc, id desc);
