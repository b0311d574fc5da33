/** A page to practice on: a system's circuit with a hidden fault, and a meter to find it. */
package rungbook.pack.practice;
