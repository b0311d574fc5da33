package rungbook.rules;

import rungbook.tree.Tree;

/** A tree as the rules see it, with what several rules ask of it worked out once. */
public record Subject(Tree tree) {}
