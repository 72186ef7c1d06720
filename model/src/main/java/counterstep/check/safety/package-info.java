/** Checks of power, heat, static and the hazards that warn of them. */
package counterstep.check.safety;
