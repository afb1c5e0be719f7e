/** The SQLite file: schema and migrations, one class an aggregate. The only room that knows SQL. */
package roundwright.store;
