/** In place of @stdlib/assert-has-generator-support, which tries generators by eval: the page's policy forbids that. */
module.exports = () => true;
