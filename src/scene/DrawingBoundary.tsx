import { Component, type ReactNode } from 'react';

interface DrawingBoundaryProps {
  instead: (again: () => void) => ReactNode;
  children: ReactNode;
}

/** Keeps a drawing that fails from taking the page with it. */
export class DrawingBoundary extends Component<DrawingBoundaryProps, { failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError() {
    return { failed: true };
  }

  override render() {
    return this.state.failed ? this.props.instead(() => this.setState({ failed: false })) : this.props.children;
  }
}
