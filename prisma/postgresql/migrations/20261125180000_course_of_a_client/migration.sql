-- AlterTable
ALTER TABLE "Practice" ADD COLUMN "regions" JSONB NOT NULL DEFAULT '[]';
ALTER TABLE "Client" ADD COLUMN "coach" TEXT;
ALTER TABLE "Client" ADD COLUMN "endedAt" TIMESTAMP(3);
ALTER TABLE "Client" ADD COLUMN "remind" BOOLEAN;
ALTER TABLE "Plan" ADD COLUMN "checked" JSONB NOT NULL DEFAULT '[]';
ALTER TABLE "Alert" ADD COLUMN "had" JSONB NOT NULL DEFAULT '[]';

-- CreateTable
CREATE TABLE "Activity" (
    "id" TEXT NOT NULL,
    "clientId" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,
    "scores" JSONB NOT NULL,

    CONSTRAINT "Activity_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Question" (
    "id" TEXT NOT NULL,
    "clientId" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,
    "words" TEXT NOT NULL,
    "answeredAt" TIMESTAMP(3),
    "answeredBy" TEXT,
    "answer" TEXT,

    CONSTRAINT "Question_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Cover" (
    "id" TEXT NOT NULL,
    "practiceId" TEXT NOT NULL,
    "coach" TEXT NOT NULL,
    "cover" TEXT NOT NULL,
    "from" TEXT NOT NULL,
    "until" TEXT NOT NULL,

    CONSTRAINT "Cover_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Activity_clientId_at_idx" ON "Activity"("clientId", "at");
CREATE INDEX "Question_clientId_answeredAt_idx" ON "Question"("clientId", "answeredAt");
CREATE INDEX "Cover_practiceId_idx" ON "Cover"("practiceId");

-- AddForeignKey
ALTER TABLE "Activity" ADD CONSTRAINT "Activity_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "Question" ADD CONSTRAINT "Question_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client"("id") ON DELETE CASCADE ON UPDATE CASCADE;
ALTER TABLE "Cover" ADD CONSTRAINT "Cover_practiceId_fkey" FOREIGN KEY ("practiceId") REFERENCES "Practice"("id") ON DELETE CASCADE ON UPDATE CASCADE;
