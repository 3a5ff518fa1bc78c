-- Counts the changes of a flyer's fleet: what was computed for one version holds as long as it stands.
alter table flyer add column fleet_version bigint default 0 not null;

-- Limits that a charge fired lay above, as words.
alter table ground_test add column beyond varchar(20);
