// A program of its own: makes an empty embedded database in the folder it is given.
import { PGlite } from '@electric-sql/pglite';

const made = await PGlite.create(process.argv[2]);
await made.close();
