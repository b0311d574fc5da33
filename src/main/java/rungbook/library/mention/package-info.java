/** Where the texts of a library name its files, and what changes with a file's name or with words. */
package rungbook.library.mention;
