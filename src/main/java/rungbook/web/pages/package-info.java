/** The pages, one class each, with a checked template of the same name. */
package rungbook.web.pages;
