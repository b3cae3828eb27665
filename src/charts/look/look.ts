/** Everything that gives the program its face, in the order in which it must load. */
import './fonts.css';
import './tokens.css';
import './base.css';
import './charts.css';
