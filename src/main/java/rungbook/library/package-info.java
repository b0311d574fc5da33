/** Compiles a folder of trees to a library; start at {@link rungbook.library.LibraryCompiler}. */
package rungbook.library;
