/**
 * A folder of trees becomes a compiled library. {@link rungbook.library.LibraryCompiler} is the whole story on one
 * page.
 */
package rungbook.library;
