-- CreateTable
CREATE TABLE "Practice" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "guild" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "region" TEXT,
    "language" TEXT NOT NULL,
    "digest" TEXT NOT NULL,
    "coachRole" TEXT,
    "coachChannel" TEXT,
    "alertChannel" TEXT,
    "deputy" TEXT,
    "window" INTEGER NOT NULL,
    "quote" BOOLEAN NOT NULL,
    "policyConfirmed" TEXT,
    "retentionDays" INTEGER NOT NULL,
    "createdAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Client" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "practiceId" TEXT NOT NULL,
    "ref" TEXT NOT NULL,
    "user" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "region" TEXT,
    "language" TEXT NOT NULL,
    "prompt" TEXT NOT NULL,
    "reminder" TEXT,
    "off" JSONB NOT NULL,
    "side" TEXT,
    "stage" TEXT NOT NULL,
    "wordsOnly" BOOLEAN NOT NULL,
    "start" TEXT,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Client_practiceId_fkey" FOREIGN KEY ("practiceId") REFERENCES "Practice" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Consent" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "answer" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "version" TEXT NOT NULL,
    "sexualQuestions" BOOLEAN NOT NULL,
    CONSTRAINT "Consent_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Screening" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "answers" JSONB NOT NULL,
    "startedAt" DATETIME NOT NULL,
    "doneAt" DATETIME,
    CONSTRAINT "Screening_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Plan" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "sessions" INTEGER NOT NULL,
    "loads" JSONB NOT NULL,
    "gate" JSONB NOT NULL,
    "by" TEXT NOT NULL,
    CONSTRAINT "Plan_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Rung" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "day" TEXT NOT NULL,
    "ladder" TEXT NOT NULL,
    "from" INTEGER NOT NULL,
    "to" INTEGER NOT NULL,
    "why" TEXT NOT NULL,
    "by" TEXT NOT NULL,
    CONSTRAINT "Rung_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "CheckIn" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "sessions" INTEGER,
    "planned" INTEGER NOT NULL,
    "reach" TEXT,
    "pain" INTEGER,
    "side" TEXT,
    "signs" JSONB NOT NULL,
    "denied" JSONB,
    "care" TEXT NOT NULL,
    "filled" TEXT NOT NULL,
    "late" BOOLEAN NOT NULL,
    "comfort" BOOLEAN,
    "settled" BOOLEAN,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "CheckIn_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Version" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "day" TEXT,
    "at" DATETIME NOT NULL,
    "zone" TEXT NOT NULL,
    "via" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "reading" JSONB NOT NULL,
    "lexicon" TEXT NOT NULL,
    CONSTRAINT "Version_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Sign" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "sign" TEXT NOT NULL,
    "care" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "words" TEXT NOT NULL,
    "until" DATETIME,
    "endedAt" DATETIME,
    "endedBy" TEXT,
    CONSTRAINT "Sign_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Hold" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "ladder" TEXT,
    "reason" TEXT NOT NULL,
    "by" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "day" TEXT NOT NULL,
    "endedAt" DATETIME,
    "endedBy" TEXT,
    CONSTRAINT "Hold_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Flag" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "rule" TEXT NOT NULL,
    "level" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "figures" JSONB NOT NULL,
    "openedAt" DATETIME NOT NULL,
    "closedAt" DATETIME,
    CONSTRAINT "Flag_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Decision" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "day" TEXT NOT NULL,
    "by" TEXT NOT NULL,
    "decision" TEXT NOT NULL,
    "ladder" TEXT,
    "reason" TEXT NOT NULL,
    "proposal" TEXT NOT NULL,
    "rules" JSONB NOT NULL,
    CONSTRAINT "Decision_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Alert" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "signs" JSONB NOT NULL,
    "care" TEXT NOT NULL,
    "openedAt" DATETIME NOT NULL,
    "takenBy" TEXT,
    "takenAt" DATETIME,
    "outcome" TEXT,
    "closedAt" DATETIME,
    CONSTRAINT "Alert_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AlertStep" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "alertId" TEXT NOT NULL,
    "clientId" TEXT NOT NULL,
    "step" INTEGER NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "AlertStep_alertId_fkey" FOREIGN KEY ("alertId") REFERENCES "Alert" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "AlertStep_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Asked" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "ask" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "message" TEXT NOT NULL,
    "pressing" BOOLEAN NOT NULL,
    "options" JSONB NOT NULL,
    CONSTRAINT "Asked_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Due" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "practiceId" TEXT NOT NULL,
    "clientId" TEXT,
    "kind" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "data" JSONB NOT NULL,
    CONSTRAINT "Due_practiceId_fkey" FOREIGN KEY ("practiceId") REFERENCES "Practice" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Due_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Inbound" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT,
    "at" DATETIME NOT NULL,
    CONSTRAINT "Inbound_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Note" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "clientId" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    "by" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    CONSTRAINT "Note_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Outbox" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "key" TEXT NOT NULL,
    "practiceId" TEXT,
    "clientId" TEXT,
    "kind" TEXT NOT NULL,
    "body" JSONB NOT NULL,
    "priority" INTEGER NOT NULL,
    "seq" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "notBefore" DATETIME NOT NULL,
    "expires" DATETIME,
    "attempts" INTEGER NOT NULL,
    "sentAt" DATETIME,
    "channel" TEXT,
    "platformId" TEXT,
    "reason" TEXT,
    CONSTRAINT "Outbox_practiceId_fkey" FOREIGN KEY ("practiceId") REFERENCES "Practice" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "Outbox_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Lease" (
    "name" TEXT NOT NULL PRIMARY KEY,
    "holder" TEXT NOT NULL,
    "until" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Setting" (
    "key" TEXT NOT NULL PRIMARY KEY,
    "value" TEXT NOT NULL
);

-- CreateIndex
CREATE UNIQUE INDEX "Practice_guild_key" ON "Practice"("guild");

-- CreateIndex
CREATE INDEX "Client_user_idx" ON "Client"("user");

-- CreateIndex
CREATE UNIQUE INDEX "Client_practiceId_ref_key" ON "Client"("practiceId", "ref");

-- CreateIndex
CREATE INDEX "Consent_clientId_at_idx" ON "Consent"("clientId", "at");

-- CreateIndex
CREATE INDEX "Screening_clientId_startedAt_idx" ON "Screening"("clientId", "startedAt");

-- CreateIndex
CREATE INDEX "Plan_clientId_at_idx" ON "Plan"("clientId", "at");

-- CreateIndex
CREATE INDEX "Rung_clientId_at_idx" ON "Rung"("clientId", "at");

-- CreateIndex
CREATE UNIQUE INDEX "CheckIn_clientId_day_key" ON "CheckIn"("clientId", "day");

-- CreateIndex
CREATE INDEX "Version_clientId_at_idx" ON "Version"("clientId", "at");

-- CreateIndex
CREATE INDEX "Sign_clientId_state_idx" ON "Sign"("clientId", "state");

-- CreateIndex
CREATE INDEX "Hold_clientId_endedAt_idx" ON "Hold"("clientId", "endedAt");

-- CreateIndex
CREATE INDEX "Flag_clientId_closedAt_idx" ON "Flag"("clientId", "closedAt");

-- CreateIndex
CREATE INDEX "Decision_clientId_day_idx" ON "Decision"("clientId", "day");

-- CreateIndex
CREATE INDEX "Alert_clientId_closedAt_idx" ON "Alert"("clientId", "closedAt");

-- CreateIndex
CREATE INDEX "AlertStep_clientId_idx" ON "AlertStep"("clientId");

-- CreateIndex
CREATE UNIQUE INDEX "AlertStep_alertId_step_key" ON "AlertStep"("alertId", "step");

-- CreateIndex
CREATE INDEX "Asked_clientId_idx" ON "Asked"("clientId");

-- CreateIndex
CREATE INDEX "Due_at_idx" ON "Due"("at");

-- CreateIndex
CREATE INDEX "Due_clientId_idx" ON "Due"("clientId");

-- CreateIndex
CREATE INDEX "Inbound_clientId_idx" ON "Inbound"("clientId");

-- CreateIndex
CREATE INDEX "Inbound_at_idx" ON "Inbound"("at");

-- CreateIndex
CREATE INDEX "Note_clientId_at_idx" ON "Note"("clientId", "at");

-- CreateIndex
CREATE UNIQUE INDEX "Outbox_key_key" ON "Outbox"("key");

-- CreateIndex
CREATE INDEX "Outbox_state_priority_seq_idx" ON "Outbox"("state", "priority", "seq");

-- CreateIndex
CREATE INDEX "Outbox_state_notBefore_idx" ON "Outbox"("state", "notBefore");

-- CreateIndex
CREATE INDEX "Outbox_clientId_state_priority_notBefore_seq_idx" ON "Outbox"("clientId", "state", "priority", "notBefore", "seq");

-- CreateIndex
CREATE INDEX "Outbox_seq_idx" ON "Outbox"("seq");
