package rungbook.pack;

/**
 * A tree of a library that has no pack.
 *
 * @param path its file's path in the library
 * @param why a sentence without its period; names of the text are in backticks
 */
public record LeftOut(String path, String title, String why) {}
