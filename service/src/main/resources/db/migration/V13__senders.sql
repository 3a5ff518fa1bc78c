-- What the key was called that logged a test; null where there were no keys, and for what was logged before.
alter table ground_test add column logged_by varchar(80);
