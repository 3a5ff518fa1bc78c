-- How good a measured speed is, in percent of it; where nothing is said the model takes it to be good to 10 %.
alter table ground_test add column speed_uncertainty_percent varchar(48);
