-- What the path is on every file system (NameKey). Libraries from before may hold names that collide: the later one has no key.
alter table document add column name_key varchar(600) unique;
