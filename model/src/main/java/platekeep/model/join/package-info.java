/**
 * Three plates to a joined plate: what two people did to one plate, put together row by row and cable by cable.
 *
 * <p>What one side changed holds; what both changed in the same way holds; where they truly disagree, what stood before
 * stands and a clash says so as data. The bytes of the result do not depend on who joins. Read
 * {@link platekeep.model.join.Join} first.
 */
package platekeep.model.join;
