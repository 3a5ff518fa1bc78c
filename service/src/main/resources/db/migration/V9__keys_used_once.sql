-- A key that only signs a phone in, once; then it is that phone's own and its text is no longer known to anyone.
alter table access_key add column once boolean default false not null;
