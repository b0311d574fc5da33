/** Starts the server: its main class, the message with the address, and the training run for a fast start. */
package rungbook.web;
