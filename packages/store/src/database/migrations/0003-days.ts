import { type Kysely, sql } from 'kysely';

/** Soil days that are planned: which samples, how far each is, and what came of it. */
export const days = () => ({
  async up(db: Kysely<unknown>): Promise<void> {
    await db.schema
      .createTable('day_run')
      .addColumn('garden', 'text', (column) => column.primaryKey().notNull().references('garden.id'))
      .addColumn('options', 'text', (column) => column.notNull())
      .addColumn('paused', 'integer', (column) => column.notNull())
      .execute();
    await db.schema
      .createTable('day_job')
      .addColumn('garden', 'text', (column) => column.notNull().references('day_run.garden'))
      .addColumn('place', 'text', (column) => column.notNull())
      .addColumn('code', 'text', (column) => column.notNull())
      .addColumn('position', 'integer', (column) => column.notNull())
      .addColumn('source', 'text', (column) => column.notNull())
      .addColumn('state', 'text', (column) =>
        column.notNull().check(sql`state in ('waiting', 'running', 'done', 'failed')`),
      )
      .addColumn('tries', 'integer', (column) => column.notNull())
      .addColumn('error', 'text')
      .addColumn('claim', 'text')
      .addPrimaryKeyConstraint('day_job_key', ['garden', 'place'])
      .execute();
    await db.schema.createIndex('day_job_next').on('day_job').columns(['state', 'garden', 'position']).execute();
    // The key is what makes a plan once and only once, whoever hands it in.
    await db.schema
      .createTable('day_result')
      .addColumn('garden', 'text', (column) => column.notNull())
      .addColumn('place', 'text', (column) => column.notNull())
      .addColumn('source', 'text', (column) => column.notNull())
      .addColumn('body', 'text', (column) => column.notNull())
      .addPrimaryKeyConstraint('day_result_key', ['garden', 'place'])
      .addForeignKeyConstraint('day_result_job', ['garden', 'place'], 'day_job', ['garden', 'place'], (key) =>
        key.onDelete('cascade'),
      )
      .execute();
  },
});
