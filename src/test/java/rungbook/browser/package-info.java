/** One headless Chromium for the tests that look at pages as people see them. */
package rungbook.browser;
