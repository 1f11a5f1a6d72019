/**
 * Reading letters as mail programs write them, and telling what their writers said now from all
 * else that stands in them.
 */
package limberboard.letters.mail;
