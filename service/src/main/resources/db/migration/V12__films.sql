-- Whether a flyer films every firing: how good the speeds of the films are, in percent; null where nothing is filmed.
alter table flyer add column filmed_percent integer;
