/**
 * The links that must hold by the facts on items, and the few of them that a drawing lacks. What
 * the drawn links alone allow is {@code links}; whether an order goes wrong is for checks.
 */
package counterstep.implied;
