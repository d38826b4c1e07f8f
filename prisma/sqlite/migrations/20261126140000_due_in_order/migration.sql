-- What is due is taken in order of instant and id: many have the same instant.
DROP INDEX "Due_at_idx";
CREATE INDEX "Due_at_id_idx" ON "Due"("at", "id");
