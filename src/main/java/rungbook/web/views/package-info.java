/** What pages and the REST interface show, as records and pictures. Pure. */
package rungbook.web.views;
