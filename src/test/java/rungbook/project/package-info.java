/** What holds for the project as a whole: which room knows which, and that its pages and files keep their word. */
package rungbook.project;
