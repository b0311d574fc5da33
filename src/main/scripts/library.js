// Of a file with many trees.
import './search.js';
import './pack.js';
