/** Stands for a module of a package that is not shipped (webpack.config.cjs says which and why). */
module.exports = {};
