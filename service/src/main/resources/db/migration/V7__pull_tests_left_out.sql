-- A pull that does not belong to its batch stays, and does not count.
alter table pull_test add column left_out boolean default false not null;
